package yardlight.db.boxkey;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface BoxKeyRows extends JpaRepository<BoxKeyRow, String> {

    Optional<BoxKeyRow> findByHash(String hash);

    List<BoxKeyRow> findByBoxOrderByCreatedAt(String box);

    @Query("select k.hash from BoxKeyRow k where k.revokedAt >= :since")
    List<String> hashesRevokedSince(Instant since);

    @Modifying
    @Query("update BoxKeyRow k set k.revokedAt = :now where k.box = :box and k.id = :id and k.revokedAt is null")
    int revoke(String box, String id, Instant now);
}
