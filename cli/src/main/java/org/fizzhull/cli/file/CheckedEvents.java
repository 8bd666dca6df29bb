package org.fizzhull.cli.file;

import org.fizzhull.quantity.Refusal;
import org.fizzhull.text.PrintableText;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.parser.Parser;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/**
 * The events of a YAML text, each looked at before anything is built from it: what makes a small file large or deep, or hides
 * what it says, is refused with its line. The text is read once.
 */
final class CheckedEvents implements Parser {
    /** A recipe is three levels deep. */
    static final int DEEPEST = 20;

    private final String file;
    private final Parser parser;
    private int depth;

    /** Whether the next event was looked at. */
    private boolean seen;

    CheckedEvents(String file, LoadSettings settings, String text) {
        this.file = file;
        parser = new ParserImpl(settings, new StreamReader(settings, text));
    }

    @Override
    public boolean checkEvent(Event.ID choice) {
        look();
        return parser.checkEvent(choice);
    }

    @Override
    public Event peekEvent() {
        look();
        return parser.peekEvent();
    }

    @Override
    public Event next() {
        look();
        seen = false;
        return parser.next();
    }

    @Override
    public boolean hasNext() {
        look();
        return parser.hasNext();
    }

    private void look() {
        if (!seen && parser.hasNext()) {
            seen = true;
            look(parser.peekEvent());
        }
    }

    private void look(Event event) {
        if (event instanceof AliasEvent
                || (event instanceof NodeEvent node && node.getAnchor().isPresent())) {
            throw refused(
                    event,
                    "unreadable",
                    "an anchor or alias (& or *)",
                    "plain lines",
                    "Write the lines out where they belong.");
        }
        depth += event instanceof CollectionStartEvent ? 1 : event instanceof CollectionEndEvent ? -1 : 0;
        if (depth > DEEPEST) {
            throw refused(
                    event,
                    "unreadable",
                    "brackets or lines more than " + DEEPEST + " levels deep",
                    "a name and a value on each line",
                    "A recipe has sections and their lines, no more.");
        }
        // the text of the file was looked at before; what else a value may hold comes from an escape in double quotes
        if (event instanceof ScalarEvent scalar
                && scalar.getScalarStyle() == ScalarStyle.DOUBLE_QUOTED
                && PrintableText.hiddenAt(scalar.getValue()) >= 0) {
            throw refused(
                    event,
                    "hidden-character",
                    scalar.getValue(),
                    "text in which every character can be seen",
                    "Leave out the escape behind the backslash.");
        }
    }

    private Refusal refused(Event event, String code, String read, String allowed, String hint) {
        int line = event.getStartMark().map(mark -> mark.getLine() + 1).orElse(0);
        return new Refusal(code, file, read, allowed, hint).at(file, line);
    }
}
