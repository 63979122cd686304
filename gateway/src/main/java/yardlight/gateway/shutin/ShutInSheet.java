package yardlight.gateway.shutin;

import java.util.List;

/**
 * The page on which a site is asked to shut in, in words.
 *
 * @param set whether the setup says how it is asked
 * @param on whether the owner has turned it on for exactly that
 * @param terms how it is asked
 * @param words the same for the engine: what the owner consents to
 * @param request how the newest request stands; empty when there never was one
 * @param asked who asked for it
 * @param open whether something is still to come of it
 * @param lacking why it cannot be turned on here; empty when it can
 */
record ShutInSheet(
        String id,
        String name,
        boolean set,
        boolean on,
        List<String> terms,
        String words,
        String request,
        String asked,
        boolean open,
        String lacking) {}
