package yardlight.db.link;

import java.time.Instant;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.NativeQuery;

interface AnswerLinkRows extends JpaRepository<AnswerLinkRow, String> {

    @Modifying(clearAutomatically = true)
    @NativeQuery("update link set used_at = :now where token_hash = :hash and used_at is null and expires_at > :now")
    int use(String hash, Instant now);
}
