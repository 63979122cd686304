package yardlight.gateway.lane;

import yardlight.escalation.setup.Setup;

/** Makes a setup of its document, one that was found good when it was stored. */
@FunctionalInterface
public interface SetupSource {

    Setup read(String document);
}
