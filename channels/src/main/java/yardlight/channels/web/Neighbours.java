package yardlight.channels.web;

import java.math.BigInteger;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;

/**
 * Addresses that are not of the public internet: ours, the office's, the provider's own. By the registries of IANA for
 * special purposes (RFC 6890 and what was added to it), the more specific ones of which are public left out as well.
 */
public final class Neighbours {

    private static final List<Block> V4 = blocks(
            "0.0.0.0/8",
            "10.0.0.0/8",
            "100.64.0.0/10",
            "127.0.0.0/8",
            "169.254.0.0/16",
            "172.16.0.0/12",
            "192.0.0.0/24",
            "192.0.2.0/24",
            "192.88.99.0/24",
            "192.168.0.0/16",
            "198.18.0.0/15",
            "198.51.100.0/24",
            "203.0.113.0/24",
            "224.0.0.0/3");

    /** All that was given out to the world so far is in here; what is embedded in it of the old addresses is not. */
    private static final Block WORLD = Block.of("2000::/3");

    private static final List<Block> V6 = blocks("2001::/23", "2001:db8::/32", "2002::/16", "3fff::/20");

    private Neighbours() {}

    public static boolean include(InetAddress address) {
        if (address instanceof Inet4Address) {
            return V4.stream().anyMatch(block -> block.has(address));
        }
        return !WORLD.has(address) || V6.stream().anyMatch(block -> block.has(address));
    }

    private static List<Block> blocks(String... written) {
        return List.of(written).stream().map(Block::of).toList();
    }

    /** @param bits how many of the first bits count */
    private record Block(byte[] first, int bits) {

        static Block of(String written) {
            String[] parts = written.split("/");
            return new Block(literal(parts[0]), Integer.parseInt(parts[1]));
        }

        boolean has(InetAddress address) {
            byte[] bytes = address.getAddress();
            int rest = bytes.length * 8 - bits;
            return bytes.length == first.length
                    && new BigInteger(1, bytes).shiftRight(rest).equals(new BigInteger(1, first).shiftRight(rest));
        }

        private static byte[] literal(String address) {
            try {
                return InetAddress.getByName(address).getAddress();
            } catch (UnknownHostException e) {
                throw new IllegalStateException("an address in numbers is not looked up", e);
            }
        }
    }
}
