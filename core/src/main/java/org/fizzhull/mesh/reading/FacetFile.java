package org.fizzhull.mesh.reading;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Unit;

/**
 * The facets of a file before it is asked whether they close.
 *
 * @param facets welded at corners with the same coordinates, in units of the file
 * @param ascii true for an ASCII STL, false for any other
 * @param ownUnit unit of length that the file names; empty for STL, which names none
 * @param doubt what is suspicious about the number of facets, part of a sentence; empty for nothing
 * @param notices what was left out or tolerated
 */
record FacetFile(VertexWeld facets, boolean ascii, Optional<Unit> ownUnit, String doubt, List<Notice> notices) {}
