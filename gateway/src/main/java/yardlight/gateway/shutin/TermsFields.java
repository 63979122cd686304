package yardlight.gateway.shutin;

import java.util.List;
import java.util.Set;
import yardlight.escalation.shutin.Terms;
import yardlight.gateway.fields.Field;
import yardlight.gateway.fields.Group;
import yardlight.gateway.fields.Layout;

/** How a site is asked to shut in. */
final class TermsFields {

    static final String NAME = "shutIn";
    static final String BOX = Terms.Way.BOX.word();
    static final String RELAY = Terms.Way.RELAY.word();

    static final Layout LAYOUT = Layout.of(Group.cases(
            NAME,
            "way",
            List.of(BOX, RELAY),
            Set.of(BOX, RELAY),
            Field.choice("shutIn/box").when(BOX),
            Field.choice("shutIn/relay").when(RELAY),
            Field.span("shutIn/expires").usually(Terms.EXPIRES),
            Field.span("shutIn/confirmWithin"),
            Field.span("shutIn/lastCall"),
            Field.text("shutIn/point").usually(Terms.POINT),
            Field.text("shutIn/done").usually(Terms.DONE),
            Field.text("shutIn/refused").usually(Terms.REFUSED)));

    private TermsFields() {}
}
