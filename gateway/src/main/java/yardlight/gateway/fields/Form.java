package yardlight.gateway.fields;

import yardlight.gateway.edit.Notes;

/**
 * A form as somebody sees it.
 *
 * @param seen the version of the setup that was looked at
 * @param notes what is wrong, and what somebody else changed meanwhile
 * @param stored whether what stands in it holds now
 */
public record Form(Layout layout, int seen, Values values, Notes notes, boolean stored) {

    /** Whether it was sent and did not hold. */
    public boolean refused() {
        return !notes.equals(Notes.NONE);
    }

    /** Whether it would have held if nobody else had changed the same. */
    public boolean overtaken() {
        return !notes.other().isEmpty();
    }
}
