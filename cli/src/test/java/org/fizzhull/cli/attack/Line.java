package org.fizzhull.cli.attack;

import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * One command line.
 *
 * @param words command, options, values
 * @param in standard input, which {@code stream} reads
 */
record Line(List<String> words, byte[] in) {
    Line {
        words = List.copyOf(words);
    }

    /** The command as it was typed. */
    String command() {
        return words.isEmpty() ? "" : words.get(0);
    }

    /** How a person would type it, long words and a long input cut. */
    String shown() {
        StringBuilder line = new StringBuilder();
        for (String word : words) {
            String plain = word.length() > 400 ? word.substring(0, 400) + "..." : word;
            line.append(" '").append(plain.replace("'", "'\\''")).append('\'');
        }
        if (in.length > 0) {
            String text = new String(in, StandardCharsets.UTF_8);
            line.append(" <<< ").append(text.length() > 2000 ? text.substring(0, 2000) + "..." : text);
        }
        return line.toString();
    }
}
