package yardlight.db.person;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.NativeQuery;

interface PersonRows extends JpaRepository<PersonRow, String> {

    @NativeQuery("select exists (select 1 from person where role = :role)")
    boolean anyWithRole(String role);

    /** Keeps the rows until the transaction ends, so that two owners do not take the role from each other at once. */
    @NativeQuery("select * from person where role = :role order by login for update")
    List<PersonRow> lockByRole(String role);
}
