package org.fizzhull.cli.picture;

import java.util.List;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.text.PrintableText;

/** A small SVG document: shapes and real text, a title and a description, no script, no font of its own. */
public final class Svg {
    /** A description is long; nothing a picture says is longer. */
    private static final int LONGEST = 10_000;

    private final StringBuilder out = new StringBuilder(8192);

    /** A document of a size in pixels. */
    public Svg(double width, double height, String title, String description) {
        this(width, height, 1, title, description);
    }

    /** A document drawn in units of its own: {@code scale} pixels each. */
    public Svg(double width, double height, double scale, String title, String description) {
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"");
        number(width * scale).append("\" height=\"");
        number(height * scale).append("\" viewBox=\"0 0 ");
        number(width).append(' ');
        number(height).append("\" role=\"img\" font-family=\"sans-serif\" font-size=\"14\">\n<title>");
        escaped(title).append("</title>\n<desc>");
        escaped(description).append("</desc>\n");
    }

    public Svg rect(double x, double y, double width, double height, String style) {
        return tag("rect", style, "x", x, "y", y, "width", width, "height", height);
    }

    public Svg circle(double x, double y, double radius, String style) {
        return tag("circle", style, "cx", x, "cy", y, "r", radius);
    }

    public Svg line(double x1, double y1, double x2, double y2, String style) {
        return tag("line", style, "x1", x1, "y1", y1, "x2", x2, "y2", y2);
    }

    /** Closed outlines, filled by the even-odd rule. */
    public Svg outlines(double[][][] outlines, String style) {
        out.append("<path fill-rule=\"evenodd\" ").append(style).append(" d=\"");
        for (double[][] outline : outlines) {
            for (int i = 0; i < outline.length; i++) {
                out.append(i == 0 ? 'M' : 'L');
                number(outline[i][0]).append(' ');
                number(outline[i][1]);
            }
            out.append('Z');
        }
        out.append("\"/>\n");
        return this;
    }

    /** Closed pieces of one area, all turned the same way round, so that they may overlap. */
    Svg patches(List<double[][]> pieces, String style) {
        out.append("<path ").append(style).append(" d=\"");
        for (double[][] piece : pieces) {
            for (int i = 0; i < piece.length; i++) {
                out.append(i == 0 ? 'M' : i == 1 ? 'L' : ' ');
                number(piece[i][0]).append(' ');
                number(piece[i][1]);
            }
            out.append('Z');
        }
        out.append("\"/>\n");
        return this;
    }

    /** An open line through points. */
    public Svg polyline(double[][] points, String style) {
        out.append("<polyline ").append(style).append(" points=\"");
        for (int i = 0; i < points.length; i++) {
            out.append(i == 0 ? "" : " ");
            number(points[i][0]).append(',');
            number(points[i][1]);
        }
        out.append("\"/>\n");
        return this;
    }

    /** Words at a place; nothing where there are none. */
    public Svg text(double x, double y, String style, String text) {
        if (text.isEmpty()) {
            return this;
        }
        out.append("<text x=\"");
        number(x).append("\" y=\"");
        number(y).append("\" ").append(style).append('>');
        escaped(text).append("</text>\n");
        return this;
    }

    /** The whole document. */
    public String document() {
        return out + "</svg>\n";
    }

    private Svg tag(String name, String style, Object... attributes) {
        out.append('<').append(name);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            number((Double) attributes[i + 1]).append('"');
        }
        out.append(' ').append(style).append("/>\n");
        return this;
    }

    private StringBuilder number(double value) {
        out.append(Decimals.text(Math.rint(value * 100) / 100, 8));
        return out;
    }

    private StringBuilder escaped(String words) {
        // XML has no way to hold most control characters: names show them as text
        String text = PrintableText.of(NumberText.plain(words), LONGEST);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '&' -> out.append("&amp;");
                case '"' -> out.append("&quot;");
                default -> out.append(c);
            }
        }
        return out;
    }
}
