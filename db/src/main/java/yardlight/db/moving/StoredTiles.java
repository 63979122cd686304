package yardlight.db.moving;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import yardlight.db.tree.Frontier;

/** The hashes of tiles as they are stored, to be compared with what the lines come to. They are asked for in their order. */
final class StoredTiles {

    private static final String PAGE = "select place, hash from log_tile where level = ? and place >= ? order by place"
            + " fetch first 1000 rows only";

    private final Connection connection;
    private final Map<Long, byte[]> page = new HashMap<>();

    StoredTiles(Connection connection) {
        this.connection = connection;
    }

    /** That of 256 lines, which has to be there. */
    byte[] at(long place) throws SQLException {
        return find(1, place).orElseThrow(() -> new MoveRefused("the hash of " + name(1, place) + " is missing"));
    }

    void compare(int level, long place, byte[] hash) throws SQLException {
        if (!find(level, place).filter(stored -> Arrays.equals(stored, hash)).isPresent()) {
            throw new MoveRefused("the hash of " + name(level, place) + " is not that of its lines");
        }
    }

    /** The same for a tile of tiles. */
    void compareAbove(int level, long place, byte[] hash) {
        try {
            compare(level + 1, place, hash);
        } catch (SQLException e) {
            throw new MoveRefused("the log cannot be read: " + e.getMessage(), e);
        }
    }

    /** There must not be a tile that the lines do not come to: the writer would find it in its way. */
    void refuseMore(long leaves) throws SQLException {
        int level = 1;
        long complete = leaves / Frontier.TILE;
        refuse(level, complete);
        while (complete > 0) {
            complete /= Frontier.TILE;
            level++;
            refuse(level, complete);
        }
    }

    private void refuse(int level, long from) throws SQLException {
        if (!read(level, from).isEmpty()) {
            throw new MoveRefused("there is a hash of " + name(level, from) + ", and the log does not come to it");
        }
    }

    private Optional<byte[]> find(int level, long place) throws SQLException {
        if (level > 1) {
            return Optional.ofNullable(read(level, place).get(place));
        }
        if (!page.containsKey(place)) {
            page.clear();
            page.putAll(read(level, place));
        }
        return Optional.ofNullable(page.get(place));
    }

    private Map<Long, byte[]> read(int level, long from) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(PAGE)) {
            statement.setInt(1, level);
            statement.setLong(2, from);
            var read = new HashMap<Long, byte[]>();
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    read.put(rows.getLong(1), rows.getBytes(2));
                }
            }
            return read;
        }
    }

    private static String name(int level, long place) {
        return "tile " + place + " of level " + level + " of the log's tree";
    }
}
