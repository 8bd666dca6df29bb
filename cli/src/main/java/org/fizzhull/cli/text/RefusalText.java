package org.fizzhull.cli.text;

import java.io.OutputStream;
import org.fizzhull.quantity.Refusal;

/** A refusal as the error object of docs/contract.md. */
public final class RefusalText {
    private RefusalText() {}

    /** Writes the object. */
    public static void json(OutputStream out, String command, Refusal refusal) {
        try (Json json = Json.open(out, command)) {
            put(json, refusal);
        }
    }

    /** Writes it under the key {@code error} of an open object. */
    public static void put(Json json, Refusal refusal) {
        one(json.object("error"), refusal);
        json.array("others");
        for (Refusal other : refusal.others()) {
            one(json.object(), other);
            json.end();
        }
        json.endArray().end();
    }

    private static void one(Json json, Refusal refusal) {
        json.text("code", refusal.code())
                .text("field", refusal.field())
                .text("read", refusal.read())
                .text("allowed", refusal.allowed())
                .text("hint", refusal.hint())
                .text("file", refusal.file());
        if (refusal.line() > 0) {
            json.whole("line", refusal.line());
        } else {
            json.nothing("line");
        }
    }
}
