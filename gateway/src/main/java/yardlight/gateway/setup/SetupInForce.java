package yardlight.gateway.setup;

import yardlight.escalation.setup.Setup;

/** The setup that holds now; an empty one before the owner has stored any. Cheap to ask. */
@FunctionalInterface
public interface SetupInForce {

    Setup setup();
}
