package yardlight.db.passkey;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface PasskeyRows extends JpaRepository<PasskeyRow, String> {

    List<PasskeyRow> findByHandleOrderByCreatedAt(String handle);

    @Modifying
    @Query("delete PasskeyRow p where p.id = :id and p.handle = :handle")
    int remove(String id, String handle);
}
