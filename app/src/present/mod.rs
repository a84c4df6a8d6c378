//! What the screens show: from the household and the model's results to rounded numbers and
//! chosen words. Pure, without signals.

pub mod tonight;
