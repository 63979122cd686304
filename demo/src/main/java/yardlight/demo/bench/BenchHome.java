package yardlight.demo.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.util.FileSystemUtils;

/** The folder of a gateway, and its H2 file while the gateway is stopped. */
record BenchHome(Path folder) {

    private static final String TABLES =
            "select table_name from information_schema.tables where table_schema = 'PUBLIC'"
                    + " and table_name not like 'QRTZ%' and table_name <> 'flyway_schema_history'";

    static BenchHome make() throws IOException {
        return new BenchHome(Files.createTempDirectory("yardlight-bench-"));
    }

    String url() {
        return "jdbc:h2:file:" + folder.resolve("yardlight") + ";WRITE_DELAY=0";
    }

    /**
     * Gives the boxes keys, as many and as the API would: random there, made of the box's name here. One by one over the API a hundred
     * thousand would take longer than everything that is measured.
     */
    void addKeys(int boxes) throws SQLException {
        try (Connection connection = DriverManager.getConnection(url(), "sa", "");
                PreparedStatement insert = connection.prepareStatement(
                        "insert into box_key (id, box, key_hash, created_at) values (?, ?, ?, current_timestamp)")) {
            connection.setAutoCommit(false);
            for (int box = 0; box < boxes; box++) {
                insert.setString(1, "key-" + box);
                insert.setString(2, BenchSetup.box(box));
                insert.setString(3, hash(key(box)));
                insert.addBatch();
                if (box % 1_000 == 999) {
                    insert.executeBatch();
                }
            }
            insert.executeBatch();
            connection.commit();
        }
    }

    /** As long as the real ones. */
    static String key(int box) {
        return "only-for-the-bench-" + "%024d".formatted(box);
    }

    static String hash(String key) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }

    /** Rows by table, and how large the file is once the space of what was overwritten is given back. */
    Contents contents() throws SQLException, IOException {
        Map<String, Long> rows = new TreeMap<>();
        try (Connection connection = DriverManager.getConnection(url(), "sa", "");
                Statement statement = connection.createStatement();
                Statement counting = connection.createStatement()) {
            try (ResultSet tables = statement.executeQuery(TABLES)) {
                while (tables.next()) {
                    String table = tables.getString(1);
                    try (ResultSet count = counting.executeQuery("select count(*) from " + table)) {
                        count.next();
                        rows.put(table, count.getLong(1));
                    }
                }
            }
            statement.execute("shutdown compact");
        }
        return new Contents(rows, fileBytes());
    }

    /** As large as the file is now. */
    long fileBytes() throws IOException {
        return Files.size(folder.resolve("yardlight.mv.db"));
    }

    /**
     * What is kept.
     *
     * @param rows by table
     * @param bytes of the file, compacted
     */
    record Contents(Map<String, Long> rows, long bytes) {

        long allRows() {
            return rows.values().stream().mapToLong(Long::longValue).sum();
        }
    }

    void delete() throws IOException {
        FileSystemUtils.deleteRecursively(folder);
    }
}
