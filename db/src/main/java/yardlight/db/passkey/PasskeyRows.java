package yardlight.db.passkey;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.NativeQuery;

interface PasskeyRows extends JpaRepository<PasskeyRow, String> {

    @NativeQuery("select * from passkey where handle = :handle order by created_at")
    List<PasskeyRow> of(String handle);

    @Modifying
    @NativeQuery("delete from passkey where id = :id and handle = :handle")
    int remove(String id, String handle);
}
