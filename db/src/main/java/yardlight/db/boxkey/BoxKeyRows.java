package yardlight.db.boxkey;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.NativeQuery;

interface BoxKeyRows extends JpaRepository<BoxKeyRow, String> {

    @NativeQuery("select * from box_key where key_hash = :hash")
    Optional<BoxKeyRow> byHash(String hash);

    @NativeQuery("select * from box_key where box = :box order by created_at")
    List<BoxKeyRow> of(String box);

    @NativeQuery("select * from box_key where revoked_at >= :since")
    List<BoxKeyRow> revokedSince(Instant since);

    @NativeQuery("select * from box_key where ends_at >= :since")
    List<BoxKeyRow> endingSince(Instant since);

    @Modifying
    @NativeQuery("update box_key set revoked_at = :now where box = :box and id = :id and revoked_at is null")
    int revoke(String box, String id, Instant now);

    @Modifying
    @NativeQuery("update box_key set ends_at = :end where box = :box and id <> :kept and revoked_at is null"
            + " and (ends_at is null or ends_at > :end)")
    int endOthers(String box, String kept, Instant end);
}
