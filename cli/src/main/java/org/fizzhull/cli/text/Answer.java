package org.fizzhull.cli.text;

import java.io.OutputStream;
import java.util.List;
import org.fizzhull.evidence.Notice;

/** What a command has to say: as text, short, whole and with what stands behind it, or as one JSON object. */
public interface Answer {
    /** The sentence and the cautions. */
    String brief();

    /** The whole answer. */
    String whole();

    /** What stands behind it: figures, priors and sources. */
    String behind();

    /** Writes the JSON object; returns the notices in it. */
    List<Notice> json(OutputStream out);
}
