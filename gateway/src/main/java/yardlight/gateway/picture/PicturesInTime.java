package yardlight.gateway.picture;

import java.time.Duration;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.channels.Attachment;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.Purpose;

/** Pictures for calls, each within a moment or not at all. */
@Component
class PicturesInTime implements Pictures, AutoCloseable {

    /** The notice waits for it, so it is short; a picture takes some ten milliseconds. */
    private static final Duration MOMENT = Duration.ofSeconds(2);

    private final AlarmPicture picture;
    private final InTime inTime = new InTime(MOMENT);

    PicturesInTime(AlarmPicture picture) {
        this.picture = picture;
    }

    @Override
    public Optional<Attachment> of(Notice notice) {
        return notice.purpose() == Purpose.CALL ? inTime.get(() -> picture.of(notice)) : Optional.empty();
    }

    @Override
    public void close() {
        inTime.close();
    }
}
