package yardlight.db.person;

import jakarta.persistence.LockModeType;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

interface PersonRows extends JpaRepository<PersonRow, String> {

    boolean existsByRole(String role);

    /** Keeps the rows until the transaction ends, so that two owners do not take the role from each other at once. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select p from PersonRow p where p.role = :role order by p.login")
    List<PersonRow> lockByRole(String role);
}
