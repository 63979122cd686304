package yardlight.db.incoming;

import java.time.Instant;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.NativeQuery;

interface IncomingTextRows extends JpaRepository<IncomingTextRow, String> {

    @NativeQuery("select * from incoming_text where answered_at is null and received_at >= :since"
            + " and (claimed_until is null or claimed_until < :now) order by received_at limit :most")
    List<IncomingTextRow> open(Instant since, Instant now, int most);

    @Modifying
    @NativeQuery("update incoming_text set claimed_until = :until where id = :id and answered_at is null"
            + " and (claimed_until is null or claimed_until < :now)")
    int claim(String id, Instant now, Instant until);

    @Modifying
    @NativeQuery("update incoming_text set answered_at = :now where id = :id")
    int answered(String id, Instant now);
}
