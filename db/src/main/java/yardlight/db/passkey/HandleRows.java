package yardlight.db.passkey;

import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

interface HandleRows extends JpaRepository<HandleRow, String> {

    Optional<HandleRow> findByHandle(String handle);
}
