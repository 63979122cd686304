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

    @Query("select k from BoxKeyRow k where k.revokedAt >= :since")
    List<BoxKeyRow> revokedSince(Instant since);

    @Query("select k from BoxKeyRow k where k.endsAt >= :since")
    List<BoxKeyRow> endingSince(Instant since);

    @Modifying
    @Query("update BoxKeyRow k set k.revokedAt = :now where k.box = :box and k.id = :id and k.revokedAt is null")
    int revoke(String box, String id, Instant now);

    @Modifying
    @Query("update BoxKeyRow k set k.endsAt = :end where k.box = :box and k.id <> :kept and k.revokedAt is null"
            + " and (k.endsAt is null or k.endsAt > :end)")
    int endOthers(String box, String kept, Instant end);

    @Modifying
    @Query("update BoxKeyRow k set k.usedAt = :at where k.id = :id and (k.usedAt is null or k.usedAt < :at)")
    int used(String id, Instant at);
}
