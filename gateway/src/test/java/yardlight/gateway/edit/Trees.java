package yardlight.gateway.edit;

import yardlight.gateway.document.Node;
import yardlight.gateway.setup.Documents;
import yardlight.gateway.setup.SetupText;

/** Setups as trees, for tests. */
public final class Trees {

    private Trees() {}

    public static SetupTree of(String yaml) {
        return new SetupTree((Node.Members) SetupText.document(yaml).root());
    }

    /** The one that the contract shows. */
    public static SetupTree contract() {
        return of(Documents.CONTRACT);
    }
}
