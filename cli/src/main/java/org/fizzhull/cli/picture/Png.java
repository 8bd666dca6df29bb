package org.fizzhull.cli.picture;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.DocumentLimits;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;

/**
 * The same picture as PNG, two pixels a unit. The words are drawn with the machine's sans-serif font, so bytes differ
 * between machines. Loaded only where a PNG is asked for: the graphics classes take most of a second.
 */
public final class Png {
    private static final int SCALE = 2;

    /** A shaded view has more paths than the library takes by itself. */
    private static final DocumentLimits LIMITS = new DocumentLimits(
            DocumentLimits.DEFAULT_MAX_NESTING_DEPTH, DocumentLimits.DEFAULT_MAX_USE_NESTING_DEPTH, 20_000);

    private Png() {}

    /** The PNG file of an SVG document. */
    public static byte[] of(String svg) {
        System.setProperty("java.awt.headless", "true");
        byte[] text = svg.getBytes(StandardCharsets.UTF_8);
        @Nullable
        SVGDocument document = new SVGLoader()
                .load(
                        new ByteArrayInputStream(text),
                        null,
                        LoaderContext.builder().documentLimits(LIMITS).build());
        if (document == null) {
            throw new IllegalArgumentException("the picture is no SVG document");
        }
        int width = (int) Math.ceil(document.size().width);
        int height = (int) Math.ceil(document.size().height);
        BufferedImage image = new BufferedImage(SCALE * width, SCALE * height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.scale(SCALE, SCALE);
        document.render((Component) null, graphics, new ViewBox(0, 0, width, height));
        graphics.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.setUseCache(false);
        try {
            if (!ImageIO.write(image, "png", bytes)) {
                throw new IllegalStateException("this Java writes no PNG");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
