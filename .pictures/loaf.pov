#include "common.inc"
#include "loaf_whole.inc"
#include "loaf_whole_cut.inc"
#include "loaf_slice.inc"
#include "loaf_slice_cut.inc"
camera { location <24, 21, -36> look_at <2.5, 4.4, 0> angle 37 right x*image_width/image_height }
plane { y, -1.6 texture { Linen } }
box { <-18,-1.6,-11>, <21,0,11> texture { Board } rotate y*-6 }
union {
  object { loaf_whole Crust("loaf_whole.png", 0.05) }
  object { loaf_whole_cut Matt("crumb.png") }
  rotate y*4 translate <-3,0.02,2>
}
union {
  object { loaf_slice Crust("loaf_slice.png", 0.05) }
  object { loaf_slice_cut Matt("crumb.png") }
  translate <0,0,0> rotate z*72 translate <15.2,0.05,-4> rotate y*10
}
