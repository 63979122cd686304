package yardlight.channels.smpp;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.IntConsumer;
import org.jsmpp.SMPPConstant;

/** Our answer to one deliver_sm or data_sm, over the session by which it came. Given once: what is said later is left out. */
final class Reply {

    private final Object session;
    private final IntConsumer respond;
    private final AtomicBoolean given = new AtomicBoolean();

    Reply(Object session, IntConsumer respond) {
        this.session = session;
        this.respond = respond;
    }

    Object session() {
        return session;
    }

    /** It is kept, or there is nothing to keep. Else the centre is to bring it again. */
    void kept(boolean kept) {
        give(kept ? SMPPConstant.STAT_ESME_ROK : SMPPConstant.STAT_ESME_RX_T_APPN);
    }

    /** It cannot be read and never will be. */
    void unreadable() {
        give(SMPPConstant.STAT_ESME_RX_P_APPN);
    }

    private void give(int status) {
        if (given.compareAndSet(false, true)) {
            respond.accept(status);
        }
    }
}
