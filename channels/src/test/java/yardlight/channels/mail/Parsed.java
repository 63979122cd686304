package yardlight.channels.mail;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.james.mime4j.MimeException;
import org.apache.james.mime4j.codec.DecodeMonitor;
import org.apache.james.mime4j.codec.DecoderUtil;
import org.apache.james.mime4j.stream.EntityState;
import org.apache.james.mime4j.stream.Field;
import org.apache.james.mime4j.stream.MimeConfig;
import org.apache.james.mime4j.stream.MimeTokenStream;

/** A message as Apache James mime4j reads it, strictly: a parser that shares nothing with the writer. */
record Parsed(List<Field> fields, String text) {

    static Parsed of(String wire) throws IOException, MimeException {
        MimeTokenStream tokens = new MimeTokenStream(MimeConfig.STRICT);
        tokens.parse(new ByteArrayInputStream(wire.getBytes(StandardCharsets.ISO_8859_1)));
        List<Field> fields = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        for (EntityState state = tokens.getState(); state != EntityState.T_END_OF_STREAM; state = tokens.next()) {
            if (state == EntityState.T_FIELD) {
                fields.add(tokens.getField());
            }
            if (state == EntityState.T_BODY) {
                String charset = tokens.getBodyDescriptor().getCharset();
                byte[] body = tokens.getDecodedInputStream().readAllBytes();
                // What is no text has no charset, and is none of it.
                text.append(charset == null ? "" : new String(body, charset));
            }
        }
        return new Parsed(fields, text.toString());
    }

    List<String> named(String name) {
        return fields.stream()
                .filter(field -> field.getName().equalsIgnoreCase(name))
                .map(field -> DecoderUtil.decodeEncodedWords(field.getBody().strip(), DecodeMonitor.STRICT))
                .toList();
    }

    List<String> names() {
        return fields.stream().map(Field::getName).toList();
    }
}
