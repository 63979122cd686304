package yardlight.db.person;

import java.time.Instant;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.NativeQuery;

interface DeviceRows extends JpaRepository<DeviceRow, String> {

    @NativeQuery("select exists (select 1 from device where login = :login)")
    boolean anyOf(String login);

    @NativeQuery("select exists (select 1 from device where login = :login and address = :address)")
    boolean anyAt(String login, String address);

    @NativeQuery("select exists (select 1 from device where seen_at is null)")
    boolean anyUnseen();

    @NativeQuery("select * from device where seen_at is null order by first_at")
    List<DeviceRow> unseen();

    @NativeQuery("select * from device where login = :login order by last_at desc")
    List<DeviceRow> of(String login);

    @NativeQuery("select * from device d where last_at = (select max(last_at) from device where login = d.login)")
    List<DeviceRow> newestOfEach();

    @Modifying
    @NativeQuery("update device set last_at = :now, address = :address where id = :id")
    int touch(String id, String address, Instant now);

    @Modifying
    @NativeQuery("update device set seen_at = :now where seen_at is null")
    int see(Instant now);
}
