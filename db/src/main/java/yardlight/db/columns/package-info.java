/**
 * How the engine's values lie in columns, and how they are read back: one class for each table, used by everything that
 * reads or writes it. Start reading at {@link yardlight.db.columns.AlarmColumns}.
 *
 * <p>Knows neither connections nor transactions.
 */
package yardlight.db.columns;
