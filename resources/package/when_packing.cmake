# Read by cpack when it starts. The version is asked now, not when the build was configured, and the package's time is
# the commit's (or SOURCE_DATE_EPOCH, as everywhere), so that packing twice gives the same file.
if(NOT CPACK_PW_PREFIX STREQUAL "/usr")
  # Only then the module goes into Debian's own lib folder; below plain lib, cpack would add scripts that call ldconfig.
  message(FATAL_ERROR "Configured for ${CPACK_PW_PREFIX}. A package is made with: cmake --preset package")
endif()
include(${CPACK_PW_SOURCE}/resources/package/version.cmake)
pw_version(${CPACK_PW_VERSION} ${CPACK_PW_SOURCE} CPACK_PACKAGE_VERSION)
set(CPACK_DEBIAN_PACKAGE_VERSION ${CPACK_PACKAGE_VERSION})
if(NOT DEFINED ENV{SOURCE_DATE_EPOCH})
  execute_process(COMMAND git -C ${CPACK_PW_SOURCE} log -1 --format=%ct OUTPUT_VARIABLE time
    RESULT_VARIABLE failed OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET)
  if(NOT failed)
    set(ENV{SOURCE_DATE_EPOCH} ${time})
  endif()
endif()
