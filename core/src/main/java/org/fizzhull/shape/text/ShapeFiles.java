package org.fizzhull.shape.text;

import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.Shape;
import org.jspecify.annotations.Nullable;

/**
 * Opens the files that shape text names. The library opens none itself: an embedder passes one of these to {@link
 * ShapeText#read(String, ShapeFiles)}, and decides by it which files a text may reach.
 *
 * <p>Where a file cannot be used the implementation throws a {@link org.fizzhull.quantity.Refusal}, which the reader
 * passes on.
 */
public interface ShapeFiles {
    /**
     * {@return the body of a triangle mesh in a file}
     *
     * @param file name as it stands in the shape text
     * @param unit unit of length of the file's numbers; null where the text names none: then the file must name its own
     * @throws org.fizzhull.quantity.Refusal where the file cannot be used
     */
    Shape mesh(String file, @Nullable Unit unit);

    /**
     * {@return the body of revolution of an outline in a file; the name as it stands in the shape text}
     *
     * @param file name of the file as it stands in the shape text
     * @throws org.fizzhull.quantity.Refusal where the file cannot be used
     */
    Shape revolved(String file);
}
