package yardlight.db.incoming;

import java.time.Instant;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.NativeQuery;

interface ReceiptRows extends JpaRepository<ReceiptRow, String> {

    @Modifying
    @NativeQuery("update receipt set heeded_at = :now where id = :id")
    int heeded(String id, Instant now);
}
