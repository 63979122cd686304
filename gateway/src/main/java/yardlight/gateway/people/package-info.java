/**
 * Who may come in and what they may do: sign-in, roles, the first owner, the guards of every address that people use.
 * Start reading at {@code PeopleDoor}. Boxes and links in texts have doors of their own elsewhere.
 */
package yardlight.gateway.people;
