package yardlight.gateway.picture;

import java.util.Optional;
import yardlight.channels.Attachment;
import yardlight.escalation.notice.Notice;

/** Finds a picture for a notice. */
@FunctionalInterface
public interface Pictures {

    /** None for any. */
    Pictures NONE = notice -> Optional.empty();

    /** The picture, if there is one and it can be had in a moment. Never throws, and never keeps a notice for long. */
    Optional<Attachment> of(Notice notice);
}
