/**
 * Takes over when somebody is away from their calendar: a file or an address. Start reading at {@code VacationsPage}; what a
 * calendar says is read by {@code VacationFile}. It knows nothing of what being away leads to.
 */
package yardlight.gateway.vacations;
