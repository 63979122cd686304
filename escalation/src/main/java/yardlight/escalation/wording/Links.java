package yardlight.escalation.wording;

import java.util.Optional;

/** Gives the address under which a notice can be answered. The same notice always gets the same address. */
@FunctionalInterface
public interface Links {

    Links NONE = notice -> Optional.empty();

    /** The address, short enough for a text; empty when there is no public address. */
    Optional<String> answer(String notice);
}
