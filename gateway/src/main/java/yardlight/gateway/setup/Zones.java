package yardlight.gateway.setup;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.setup.Site;
import yardlight.gateway.document.Fields;

/** Time zones. Where all sites share one, contacts and rosters need not say theirs. */
record Zones(Optional<ZoneId> shared) {

    private static final String RULE = "must be a time zone such as America/Chicago";

    static Zones of(List<Site> sites) {
        List<ZoneId> zones = sites.stream().map(Site::zone).distinct().toList();
        return new Zones(zones.size() == 1 ? Optional.of(zones.get(0)) : Optional.empty());
    }

    /** The zone that has to be there. */
    static ZoneId needed(Fields fields) {
        return fields.needs("zone")
                .as("zone", RULE, text -> Optional.of(ZoneId.of(text)))
                .orElse(ZoneOffset.UTC);
    }

    ZoneId orShared(Fields fields) {
        if (shared.isPresent() && !fields.has("zone")) {
            return shared.get();
        }
        return needed(fields);
    }
}
