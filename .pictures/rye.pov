#include "common.inc"
#include "round_loaf.inc"
camera { location <6, 24, -38> look_at <0, 3.2, 0> angle 38 right x*image_width/image_height }
plane { y, -1.6 texture { Linen } }
box { <-18,-1.6,-13>, <18,0,13> texture { Board } rotate y*9 }
object { round_loaf Matt("round_loaf.png") rotate y*30 }
