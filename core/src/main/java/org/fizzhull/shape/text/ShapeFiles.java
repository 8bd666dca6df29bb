package org.fizzhull.shape.text;

import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.Shape;

/** Opens the files that shape text names. The library opens none itself: an embedder passes one of these in. */
public interface ShapeFiles {
    /**
     * {@return the body of a triangle mesh in a file}
     *
     * @param file name as it stands in the shape text
     * @param unit unit of length of the file's numbers
     */
    Shape mesh(String file, Unit unit);

    /**
     * {@return the body of revolution of an outline in a file; the name as it stands in the shape text}
     *
     * @param file name of the file as it stands in the shape text
     */
    Shape revolved(String file);
}
