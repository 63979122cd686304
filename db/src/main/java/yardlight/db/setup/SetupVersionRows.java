package yardlight.db.setup;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface SetupVersionRows extends Repository<SetupVersionRow, Integer> {

    Optional<SetupVersionRow> findFirstByOrderByVersionDesc();

    Optional<SetupVersionRow> findById(int version);

    List<SetupVersionRow> findByVersionBetweenOrderByVersion(int first, int last);

    @Query("""
            select new yardlight.db.setup.SetupEdit(row.version, row.storedAt, row.storedBy)
            from SetupVersionRow row where row.version < :before order by row.version desc
            """)
    List<SetupEdit> edits(int before, Limit most);
}
