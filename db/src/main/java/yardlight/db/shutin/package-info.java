/**
 * How sites stand with being asked to shut in, for those who only look. Written by {@link yardlight.db.journal}, together with
 * everything else that a decision changes.
 */
package yardlight.db.shutin;
