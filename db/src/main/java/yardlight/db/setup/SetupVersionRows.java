package yardlight.db.setup;

import java.util.Optional;
import org.springframework.data.repository.Repository;

interface SetupVersionRows extends Repository<SetupVersionRow, Integer> {

    Optional<SetupVersionRow> findFirstByOrderByVersionDesc();

    Optional<SetupVersionRow> findById(int version);
}
