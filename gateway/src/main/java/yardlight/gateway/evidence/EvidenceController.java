package yardlight.gateway.evidence;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import yardlight.db.evidence.LogExport;
import yardlight.db.evidence.LogHead;
import yardlight.db.evidence.LogTree;
import yardlight.db.evidence.SignedHead;
import yardlight.gateway.document.Query;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.seal.SigningKey;

/** Gives out heads, proofs and the export. Nothing of it changes anything. */
@RestController
@RequestMapping("/api/v1/log")
class EvidenceController {

    private static final String NUMBER = "must be a whole number from 1 on";
    private static final String CUT = "it needs lines that are not kept any more";

    private final LogTree tree;
    private final LogExport export;
    private final SigningKey key;

    EvidenceController(LogTree tree, LogExport export, SigningKey key) {
        this.tree = tree;
        this.export = export;
        this.key = key;
    }

    @GetMapping(path = "/head", produces = MediaType.APPLICATION_JSON_VALUE)
    SignedHead head() {
        return key.sign(tree.head());
    }

    @GetMapping(path = "/proof", produces = MediaType.APPLICATION_JSON_VALUE)
    ProofView proof(HttpServletRequest request) {
        var query = new Query(request);
        Optional<Long> line = query.as("line", NUMBER, EvidenceController::number);
        Optional<Long> size = query.as("size", NUMBER, EvidenceController::number);
        query.orNothing();
        LogHead head = tree.head();
        long wanted = needed("line", line);
        long of = upTo("size", size.orElse(head.size()), head);
        return tree.proof(wanted, head, of)
                .map(proof -> ProofView.of(wanted, proof))
                .orElseThrow(() ->
                        Problem.notFound("there is no line " + wanted + " in the log of " + of + " lines, or " + CUT));
    }

    @GetMapping(path = "/consistency", produces = MediaType.APPLICATION_JSON_VALUE)
    ConsistencyView consistency(HttpServletRequest request) {
        var query = new Query(request);
        Optional<Long> first = query.as("first", NUMBER, EvidenceController::number);
        Optional<Long> second = query.as("second", NUMBER, EvidenceController::number);
        query.orNothing();
        LogHead head = tree.head();
        long to = upTo("second", second.orElse(head.size()), head);
        long from = needed("first", first);
        if (from > to) {
            throw wrong("first", "must be at most second, " + to);
        }
        return tree.consistency(head, from, to)
                .map(proof -> new ConsistencyView(
                        from, to, proof.stream().map(HexFormat.of()::formatHex).toList()))
                .orElseThrow(() -> Problem.notFound(CUT));
    }

    @GetMapping(path = "/export", produces = MediaType.TEXT_PLAIN_VALUE)
    void export(HttpServletResponse response) throws IOException {
        LogHead head = tree.head();
        response.setContentType(MediaType.TEXT_PLAIN_VALUE);
        response.setCharacterEncoding(StandardCharsets.UTF_8.name());
        response.setHeader(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"yardlight-log.txt\"");
        Writer writer = response.getWriter();
        export.write(head, key.sign(head), writer);
        // The end of it is the sign that it is whole: what breaks off before has none.
        writer.flush();
    }

    private static long needed(String name, Optional<Long> value) {
        return value.orElseThrow(() -> wrong(name, "is needed, " + NUMBER));
    }

    private static long upTo(String name, long value, LogHead head) {
        if (value > head.size()) {
            throw wrong(name, "must be at most " + head.size() + ", the number of lines in the log");
        }
        return value;
    }

    private static Problem wrong(String name, String rule) {
        return Problem.invalid(List.of(Fault.inQuery(name, rule)));
    }

    private static Optional<Long> number(String text) {
        return Optional.of(text)
                .filter(digits -> digits.matches("[1-9]\\d{0,17}"))
                .map(Long::parseLong);
    }
}
