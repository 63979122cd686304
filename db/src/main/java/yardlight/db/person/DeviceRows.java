package yardlight.db.person;

import java.time.Instant;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface DeviceRows extends JpaRepository<DeviceRow, String> {

    boolean existsByLogin(String login);

    boolean existsByLoginAndAddress(String login, String address);

    boolean existsBySeenAtIsNull();

    List<DeviceRow> findBySeenAtIsNullOrderByFirstAt();

    List<DeviceRow> findByLoginOrderByLastAtDesc(String login);

    @Query("select d.login, max(d.lastAt) from DeviceRow d group by d.login")
    List<Object[]> lastByLogin();

    @Modifying
    @Query("update DeviceRow d set d.lastAt = :now, d.address = :address where d.id = :id")
    int touch(String id, String address, Instant now);

    @Modifying
    @Query("update DeviceRow d set d.seenAt = :now where d.seenAt is null")
    int see(Instant now);
}
