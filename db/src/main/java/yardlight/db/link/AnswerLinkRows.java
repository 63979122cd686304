package yardlight.db.link;

import java.time.Instant;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface AnswerLinkRows extends JpaRepository<AnswerLinkRow, String> {

    @Modifying(clearAutomatically = true)
    @Query(
            "update AnswerLinkRow l set l.usedAt = :now where l.tokenHash = :hash and l.usedAt is null and l.expiresAt > :now")
    int use(String hash, Instant now);
}
