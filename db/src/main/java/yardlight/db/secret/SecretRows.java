package yardlight.db.secret;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.NativeQuery;

interface SecretRows extends JpaRepository<SecretRow, String> {

    @NativeQuery("select * from secret where name = :name or name like :name || '.%' order by created_at, name")
    List<SecretRow> generations(String name);
}
