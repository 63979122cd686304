package yardlight.db.setup;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.NativeQuery;
import org.springframework.data.repository.Repository;

interface SetupVersionRows extends Repository<SetupVersionRow, Integer> {

    @NativeQuery("select * from setup_version order by version desc limit 1")
    Optional<SetupVersionRow> newest();

    Optional<SetupVersionRow> findById(int version);

    @NativeQuery("select * from setup_version where version between :first and :last order by version")
    List<SetupVersionRow> between(int first, int last);
}
