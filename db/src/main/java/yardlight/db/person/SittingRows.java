package yardlight.db.person;

import java.time.Instant;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface SittingRows extends JpaRepository<SittingRow, String> {

    List<SittingRow> findByHeardAtAfterAndBeganAtAfterOrderByBeganAt(Instant heard, Instant began);

    @Modifying
    @Query("update SittingRow s set s.heardAt = :now where s.id = :id")
    int hear(String id, Instant now);

    @Modifying
    @Query("delete SittingRow s where s.id = :id")
    int end(String id);

    @Modifying
    @Query("delete SittingRow s where s.login = :login and s.id <> :besides")
    int endOthers(String login, String besides);

    @Modifying
    @Query("delete SittingRow s where s.heardAt <= :heard or s.beganAt <= :began")
    int endOld(Instant heard, Instant began);
}
