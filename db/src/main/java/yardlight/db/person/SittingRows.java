package yardlight.db.person;

import java.time.Instant;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.NativeQuery;

interface SittingRows extends JpaRepository<SittingRow, String> {

    @NativeQuery("select * from sitting where heard_at > :heard and began_at > :began order by began_at")
    List<SittingRow> open(Instant heard, Instant began);

    @Modifying
    @NativeQuery("update sitting set heard_at = :now where id = :id")
    int hear(String id, Instant now);

    @Modifying
    @NativeQuery("delete from sitting where id = :id")
    int end(String id);

    @Modifying
    @NativeQuery("delete from sitting where login = :login and id <> :besides")
    int endOthers(String login, String besides);

    @Modifying
    @NativeQuery("delete from sitting where heard_at <= :heard or began_at <= :began")
    int endOld(Instant heard, Instant began);
}
