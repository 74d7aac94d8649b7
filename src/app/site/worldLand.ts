import type { MultiPolygon } from 'geojson';
import { feature } from 'topojson-client';
import type { GeometryCollection, Topology } from 'topojson-specification';
import world from 'world-atlas/land-110m.json' with { type: 'json' };

/** Outline of the land (Natural Earth, public domain), by way of world-atlas. */
export function worldLand(): MultiPolygon {
  const topology = world as unknown as Topology<{ land: GeometryCollection }>;
  const { features } = feature(topology, topology.objects.land);
  return features[0].geometry as MultiPolygon;
}
