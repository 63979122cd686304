package yardlight.db.incoming;

import java.time.Instant;
import java.util.List;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface IncomingTextRows extends JpaRepository<IncomingTextRow, String> {

    @Query("select t from IncomingTextRow t where t.answeredAt is null and t.receivedAt >= :since"
            + " and (t.claimedUntil is null or t.claimedUntil < :now) order by t.receivedAt")
    List<IncomingTextRow> open(Instant since, Instant now, Limit most);

    @Modifying
    @Query("update IncomingTextRow t set t.claimedUntil = :until where t.id = :id and t.answeredAt is null"
            + " and (t.claimedUntil is null or t.claimedUntil < :now)")
    int claim(String id, Instant now, Instant until);

    @Modifying
    @Query("update IncomingTextRow t set t.answeredAt = :now where t.id = :id")
    int answered(String id, Instant now);
}
