"""What all that is bought for a job costs, against what it may cost."""
