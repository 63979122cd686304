package yardlight.db.person;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface InvitationRows extends JpaRepository<InvitationRow, String> {

    Optional<InvitationRow> findByTokenHash(String hash);

    List<InvitationRow> findByUsedAtIsNullAndExpiresAtAfterOrderByInvitedAt(Instant now);

    @Modifying
    @Query("delete InvitationRow i where i.id = :id and i.usedAt is null")
    int takeBack(String id);

    @Modifying(clearAutomatically = true)
    @Query("update InvitationRow i set i.usedAt = :now, i.usedBy = :login"
            + " where i.tokenHash = :hash and i.usedAt is null and i.expiresAt > :now")
    int use(String hash, String login, Instant now);
}
