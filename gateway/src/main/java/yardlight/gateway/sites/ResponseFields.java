package yardlight.gateway.sites;

import yardlight.escalation.tank.Response;
import yardlight.gateway.fields.Field;
import yardlight.gateway.fields.Group;
import yardlight.gateway.fields.Layout;

/** How long it takes to do something about a site. */
final class ResponseFields {

    static final String NAME = "response";

    static final Layout LAYOUT = Layout.of(Group.any(
            NAME,
            Field.span("response/reach").usually(Response.USUAL.reach()),
            Field.span("response/drive").usually(Response.USUAL.drive()),
            Field.span("response/act").usually(Response.USUAL.act()),
            Field.number("response/margin", "times").usually(Response.USUAL.margin())));

    private ResponseFields() {}
}
