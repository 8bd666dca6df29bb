package org.fizzhull.mesh;

/**
 * The facets of a file, before they are known to be a body.
 *
 * @param weld the facets
 * @param survey what was seen of the surface on the way
 * @param ascii whether the file is ASCII
 * @param ended whether the file ends as it should
 */
record StlFacets(VertexWeld weld, FacetSurvey survey, boolean ascii, boolean ended) {}
