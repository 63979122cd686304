package yardlight.db.moving;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** A crate that somebody changed who can make its hashes right again. */
final class Tampered {

    private final Map<String, String> entries = new LinkedHashMap<>();

    Tampered(Path crate) throws IOException {
        try (var zip = new ZipInputStream(Files.newInputStream(crate))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                entries.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
    }

    String part(String table) {
        return entries.get(table + ".txt");
    }

    /** Changes a part, and writes down its hash and its count as they are now. */
    Tampered change(String table, UnaryOperator<String> change) {
        String text = change.apply(part(table));
        entries.put(table + ".txt", text);
        long rows = text.lines().count() - 1;
        return list(list -> list.replaceFirst(
                "part " + table + " \\d+ [0-9a-f]+", "part " + table + " " + rows + " " + Hash.of(text)));
    }

    /** Changes what the crate says of itself. */
    Tampered list(UnaryOperator<String> change) {
        String list = entries.get(Crate.ENTRY);
        String body = change.apply(list.substring(0, list.lastIndexOf("end ")));
        entries.put(Crate.ENTRY, body + "end " + Hash.of(body) + "\n");
        return this;
    }

    Tampered without(String table) {
        entries.remove(table + ".txt");
        return this;
    }

    Path as(Path file) throws IOException {
        try (var zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (Map.Entry<String, String> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue().getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        }
        return file;
    }
}
