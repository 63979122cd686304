package yardlight.db.person;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.NativeQuery;

interface InvitationRows extends JpaRepository<InvitationRow, String> {

    @NativeQuery("select * from invitation where token_hash = :hash")
    Optional<InvitationRow> byTokenHash(String hash);

    @NativeQuery("select * from invitation where used_at is null and expires_at > :now order by invited_at")
    List<InvitationRow> open(Instant now);

    @Modifying
    @NativeQuery("delete from invitation where id = :id and used_at is null")
    int takeBack(String id);

    @Modifying(clearAutomatically = true)
    @NativeQuery("update invitation set used_at = :now, used_by = :login"
            + " where token_hash = :hash and used_at is null and expires_at > :now")
    int use(String hash, String login, Instant now);
}
