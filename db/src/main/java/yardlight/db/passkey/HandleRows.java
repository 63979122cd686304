package yardlight.db.passkey;

import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.NativeQuery;

interface HandleRows extends JpaRepository<HandleRow, String> {

    @NativeQuery("select * from passkey_handle where handle = :handle")
    Optional<HandleRow> byHandle(String handle);
}
