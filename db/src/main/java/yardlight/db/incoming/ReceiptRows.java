package yardlight.db.incoming;

import java.time.Instant;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface ReceiptRows extends JpaRepository<ReceiptRow, String> {

    @Modifying
    @Query("update ReceiptRow r set r.heededAt = :now where r.id = :id")
    int heeded(String id, Instant now);
}
