/** Sites for mapping tools. */
package pondtally.reports.geojson;
