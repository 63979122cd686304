package yardlight.gateway.evidence;

import java.util.HexFormat;
import java.util.List;
import yardlight.db.evidence.LogTree;

/**
 * The proof that a line is in the log, in the terms of RFC 6962; hashes are in hexadecimal.
 *
 * @param entry the line as it was hashed: JSON in the form of RFC 8785
 * @param index of its leaf, from 0 on
 * @param path the nearest hash first
 */
record ProofView(long line, String entry, String leaf, long index, long size, String root, List<String> path) {

    static ProofView of(long line, LogTree.Proof proof) {
        HexFormat hex = HexFormat.of();
        return new ProofView(
                line,
                proof.entry(),
                hex.formatHex(proof.leaf()),
                proof.index(),
                proof.size(),
                hex.formatHex(proof.root()),
                proof.path().stream().map(hex::formatHex).toList());
    }
}
