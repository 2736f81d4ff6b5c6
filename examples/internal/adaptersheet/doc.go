// Package adaptersheet works out an adapter to be turned from bar: a flange on
// two studs at one end, at the other a spigot that a split collar clamps on, as
// for a carburettor that belongs to another engine. The readings go in, a
// section of a worksheet comes out: every size to turn with its limits, the
// clearance cold and hot, what the slot closes by, the walls that are left, and
// which reading to take again.
//
//	 engine |  flange    neck       spigot   | collar
//	        |#########
//	        |## o ####                          o  stud hole
//	        |#########_________
//	        |##################|___________
//	        |__---------------- - - - - - -     the passage: a taper through
//	        |                                   flange and neck, then parallel
//	- - - - + - - - - - - - - - - - - - - - axis
//
// What decides each size:
//
//	spigot    the collar as it measures, worn and oval as it is, less a clearance;
//	          the slot closes by π times that, and must not shut
//	passage   never narrower than the carburettor nor wider than the port, so
//	          that no step faces the stream
//	flange    what the studs leave under washer and nut
//	neck      long enough for the collar to clear the studs
//
// Rules of thumb are marked as common practice where they come in.
package adaptersheet
