package yardlight.db.boxkey;

import java.time.Instant;
import java.time.ZoneOffset;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;

/** The posts that boxes signed lately, so that none is taken twice, whichever gateway it comes to. */
@Repository
public class SignedPosts {

    private final JdbcTemplate jdbc;

    SignedPosts(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Remembers a post. Of several calls at once one gets true.
     *
     * @param nonce up to 64 characters
     * @param forgetAt from when on the post would be too old to be taken anyway
     * @return false when there was one with this key and nonce before
     */
    public boolean isFirst(String key, String nonce, Instant forgetAt) {
        try {
            jdbc.update(
                    "insert into signed_post (key_id, nonce, forget_at) values (?, ?, ?)",
                    key,
                    nonce,
                    forgetAt.atOffset(ZoneOffset.UTC));
            return true;
        } catch (DuplicateKeyException second) {
            return false;
        }
    }

    /** Forgets what need not be remembered any more. */
    public void forget(Instant now) {
        jdbc.update("delete from signed_post where forget_at <= ?", now.atOffset(ZoneOffset.UTC));
    }
}
