package yardlight.db.secret;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface SecretRows extends JpaRepository<SecretRow, String> {

    @Query(
            "select s from SecretRow s where s.name = :name or s.name like concat(:name, '.%') order by s.createdAt, s.name")
    List<SecretRow> generations(String name);
}
