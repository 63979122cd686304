package yardlight.db.setup;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Repository;

/** Reads the setup document as it is and as it was. */
@Repository
public class SetupVersions {

    private final SetupVersionRows rows;

    SetupVersions(SetupVersionRows rows) {
        this.rows = rows;
    }

    /** The one that holds; empty before the first. */
    public Optional<SetupVersion> newest() {
        return rows.findFirstByOrderByVersionDesc().map(SetupVersionRow::version);
    }

    public Optional<SetupVersion> byVersion(int version) {
        return rows.findById(version).map(SetupVersionRow::version);
    }

    /** Those from this version to that, both included, as far as they are there; by version. */
    public List<SetupVersion> between(int first, int last) {
        return rows.findByVersionBetweenOrderByVersion(first, last).stream()
                .map(SetupVersionRow::version)
                .toList();
    }

    /**
     * The newest ones without their documents, newest first.
     *
     * @param before only versions below this one
     */
    public List<SetupEdit> edits(int before, int most) {
        return rows.edits(before, Limit.of(most));
    }
}
