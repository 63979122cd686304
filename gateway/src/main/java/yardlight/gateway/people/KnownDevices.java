package yardlight.gateway.people;

import java.util.Optional;

/** Tells those who were here before from strangers. */
interface KnownDevices {

    /** What a browser is known by in which this login has signed in before. */
    Optional<String> browser(String login, DeviceDetails details);

    /** Whether somebody has signed in with this login from this address. */
    boolean cameFrom(String login, String address);

    /** A program has signed in. */
    void program(String login, DeviceDetails details);
}
